// Opens pages in headless Chromium and says what is wrong with each. One JSON line a check: {ok, what, why}.
//
// usage: node pages.js TASK OUT FILE...      TASK: look (widths, dark, axe, print), inert (nothing of a hostile text
// came alive) or spoil (faults put in on purpose must be noticed). NODE_PATH names the folder of the packages.
const fs = require('fs');
const path = require('path');
const { chromium } = require('playwright-core');
const { HtmlValidate } = require('html-validate');
const axe = fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

const [task, out, ...files] = process.argv.slice(2);
const say = (ok, what, why = []) => console.log(JSON.stringify({ ok, what, why }));
const nameOf = file => path.basename(file, '.html');

// In the page: what sticks out of it. A region that scrolls by itself may hold something wider, if it can be reached.
function overflow() {
  const wrong = [];
  const page = document.scrollingElement;
  if (page.scrollWidth > page.clientWidth) wrong.push(`the page is ${page.scrollWidth} wide in ${page.clientWidth}`);
  for (const e of document.querySelectorAll('body *')) {
    const region = e.closest('.scroll');
    if (region && region !== e) {
      if (region.tabIndex !== 0 || !region.getAttribute('aria-label')) wrong.push('a scrolling region without a name or a tab stop');
      continue;
    }
    if (e.closest('thead') && getComputedStyle(e.closest('thead')).position === 'absolute') continue;
    const box = e.getBoundingClientRect();
    if (box.width && (box.right > innerWidth + 1 || box.left < -1)) wrong.push(`${e.tagName} "${e.textContent.slice(0, 30)}" sticks out`);
  }
  return wrong.slice(0, 4);
}

// In the page: every element and attribute that a sheet is not made of.
function strangers() {
  const known = ('html head meta title style body header main section footer h1 h2 p ul ol li dl dt dd table caption thead tbody tr th td '
    + 'figure figcaption div b pre details summary svg desc rect line polyline path circle text').split(' ');
  const wrong = [];
  for (const e of document.querySelectorAll('*')) {
    if (!known.includes(e.localName)) wrong.push(`<${e.localName}>`);
    for (const a of e.attributes)
      if (/^on/i.test(a.name) || ['src', 'href', 'action', 'srcdoc', 'formaction', 'xlink:href'].includes(a.name)) wrong.push(`${a.name}="${a.value}"`);
  }
  for (const svg of document.querySelectorAll('svg'))
    if (svg.viewBox.baseVal.width > 1100) wrong.push(`a drawing is ${svg.viewBox.baseVal.width} wide`);
  if (window.hit !== undefined) wrong.push('a script ran');
  return wrong.slice(0, 4);
}

async function audit(page) {
  await page.evaluate(axe);
  const found = await page.evaluate(() => axe.run(document, { resultTypes: ['violations'] }));
  return found.violations.filter(v => ['serious', 'critical'].includes(v.impact))
    .map(v => `${v.id} at ${v.nodes[0].target.join(' ')}: ${v.nodes[0].failureSummary.slice(0, 160)}`);
}

async function look(browser, file) {
  const page = await browser.newPage({ deviceScaleFactor: 1 });
  const asked = [];
  page.on('request', r => asked.push(r.url()));
  await page.goto('file://' + file);
  for (const [width, height] of [[360, 740], [816, 1056]]) {
    await page.setViewportSize({ width, height });
    for (const colorScheme of ['light', 'dark']) {
      await page.emulateMedia({ media: 'screen', colorScheme });
      await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
      const wrong = await page.evaluate(overflow);
      if (colorScheme === 'light') say(wrong.length === 0, `${nameOf(file)} stays inside ${width} px`, wrong);
      if ((width === 360) === (colorScheme === 'dark')) {
        const faults = await audit(page);
        say(faults.length === 0, `${nameOf(file)} is for everybody at ${width} px, ${colorScheme}`, faults);
      }
      await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = false; }));
      await page.screenshot({ path: `${out}/${nameOf(file)}-${width}-${colorScheme}.png`, fullPage: true });
    }
  }
  await page.emulateMedia({ media: 'print', colorScheme: 'light' });
  for (const format of ['Letter', 'A4']) await page.pdf({ format, path: `${out}/${nameOf(file)}-${format}.pdf`, printBackground: false, preferCSSPageSize: false });
  say(asked.length === 1, `${nameOf(file)} asks for nothing`, asked.slice(1));
  await page.close();
}

async function inert(browser, file) {
  const page = await browser.newPage();
  const wrong = [];
  page.on('dialog', d => { wrong.push(`dialog ${d.message()}`); d.dismiss(); });
  page.on('request', r => { if (r.url() !== 'file://' + file) wrong.push(`asked for ${r.url()}`); });
  page.on('pageerror', e => wrong.push(`error ${e.message}`));
  await page.goto('file://' + file);
  wrong.push(...await page.evaluate(strangers));
  say(wrong.length === 0, `${nameOf(file)} is inert`, wrong);
  for (const width of [360, 816]) {
    await page.setViewportSize({ width, height: 740 });
    const out = await page.evaluate(overflow);
    say(out.length === 0, `${nameOf(file)} stays inside ${width} px`, out);
  }
  await page.close();
}

// The checker must be able to say no.
async function spoil(browser, file) {
  const spoiled = async (what, how, look) => {
    const page = await browser.newPage();
    let asked = 0;
    page.on('request', () => { ++asked; });
    await page.goto('file://' + file);
    await page.setViewportSize({ width: 360, height: 740 });
    await page.evaluate(how);
    await page.waitForTimeout(100);
    const wrong = look === 'asked' ? (asked > 1 ? ['asked'] : []) : look === audit ? await audit(page) : await page.evaluate(look);
    say(wrong.length > 0, `${what} is noticed`);
    await page.close();
  };
  await spoiled('something too wide', () => { document.querySelector('p').style.width = '500px'; }, overflow);
  await spoiled('faint text', () => { for (const p of document.querySelectorAll('p')) p.style.color = '#ccc'; }, audit);
  await spoiled('a script', () => { window.hit = 1; }, strangers);
  await spoiled('an attribute that runs', () => { document.querySelector('p').setAttribute('onclick', '1'); }, strangers);
  await spoiled('a request', () => { const i = document.createElement('img'); i.src = 'missing.png'; document.body.append(i); }, 'asked');
  const report = await new HtmlValidate({ extends: ['html-validate:standard'] }).validateString(fs.readFileSync(file, 'utf8').replace('</h2>', '<table><p></h2>'));
  say(!report.valid, 'markup that does not nest is noticed');
}

async function valid(file) {
  const report = await new HtmlValidate({ extends: ['html-validate:standard'] }).validateString(fs.readFileSync(file, 'utf8'));
  const why = report.results.flatMap(r => r.messages).map(m => `${m.line}:${m.column} ${m.ruleId}: ${m.message}`);
  say(report.valid, `${nameOf(file)} is valid HTML`, why.slice(0, 4));
}

(async () => {
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'] });
  for (const file of files) {
    if (task !== 'spoil') await valid(file);
    await { look, inert, spoil }[task](browser, file);
  }
  await browser.close();
})();
