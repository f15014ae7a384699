#!/usr/bin/env python3
"""The drawings of nine plans, and of what was there before, laid out by a browser: headless Chromium through playwright-core.

usage: tests/outside/drawings.py BUILD_DIR      last line: "N passed, N failed"

Needs Debian's chromium and npm. Each job of tests/scenarios/wire named below gives one sheet; it is opened at the width of
a phone, of a desk and, as printed, of Letter and A4. Checked there, by the boxes the browser made: no two texts of a drawing
overlap, no line runs through one, none leaves its drawing, the drawing fits the paper and is still legible on it,
nothing is coloured, the page does not scroll sideways, nothing but the file is asked for. PNGs lie in BUILD_DIR/drawings.
Two drawings spoiled on purpose (a label moved onto another, one in red) must be noticed.
"""
import json
import os
import subprocess
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
TOOLS = os.path.join(BUILD, "npm-playwright")
OUT = os.path.join(BUILD, "drawings")
ENDBELL = os.path.join(BUILD, "cli", "endbell")
SCENARIOS = os.path.join(ROOT, "tests", "scenarios", "wire")
DRAWN = ("cooling-one-tap-only", "electric-heat-two-stages", "heat-pump-emergency", "heat-pump-two-stage", "dehumidify-highest-wins",
         "line-board-on-24V-taps", "line-board-on-speed-leads", "dual-fuel-run-signal", "own-states-ventilation")
LEGIBLE = 7.3  # CSS px of the lettering on paper: 5.5 pt, about the smallest print on a wiring label; common practice

CHECKER = """
const { chromium } = require('playwright-core');
const [out, legible, ...files] = process.argv.slice(2);
const name = f => f.replace(/.*\\//, '').replace('.html', '');

// In the page: everything wrong with it. `paper` is true where the drawing must fit without scrolling.
function faults({ paper, legible }) {
  const wrong = [];
  const page = document.scrollingElement;
  if (page.scrollWidth > page.clientWidth) wrong.push(`page scrolls sideways: ${page.scrollWidth} > ${page.clientWidth}`);
  const grey = c => { const n = (c.match(/[\\d.]+/g) || []).map(Number); return n.length < 3 || (n[0] === n[1] && n[1] === n[2]) || n[3] === 0; };
  for (const e of document.querySelectorAll('body, body *')) {
    const s = getComputedStyle(e);
    for (const p of ['color', 'backgroundColor', 'borderTopColor', 'fill', 'stroke'])
      if (!grey(s[p])) wrong.push(`${e.tagName} ${p} is ${s[p]}`);
  }
  const svgs = [...document.querySelectorAll('figure svg')];
  if (svgs.length !== 2) wrong.push(`${svgs.length} drawings, not 2`);
  for (const svg of svgs) {
    const frame = svg.getBoundingClientRect(), slack = 0.5;
    const texts = [...svg.querySelectorAll('text')].map(t => [t.textContent, t.getBoundingClientRect()]);
    if (texts.length < 2) wrong.push('a drawing without labels');
    if (paper && (frame.left < 0 || frame.right > innerWidth + slack)) wrong.push('a drawing leaves the paper');
    const size = texts.length ? parseFloat(getComputedStyle(svg.querySelector('text')).fontSize) * frame.width / svg.viewBox.baseVal.width : 0;
    if (size < legible) wrong.push(`lettering is ${size.toFixed(1)} px`);
    texts.forEach(([word, a], i) => {
      if (a.left < frame.left - slack || a.right > frame.right + slack || a.top < frame.top - slack || a.bottom > frame.bottom + slack)
        wrong.push(`"${word}" leaves its drawing`);
      for (const [other, b] of texts.slice(i + 1))
        if (a.left < b.right - slack && b.left < a.right - slack && a.top < b.bottom - slack && b.top < a.bottom - slack)
          wrong.push(`"${word}" lies on "${other}"`);
      for (const l of svg.querySelectorAll('line')) {
        const b = l.getBoundingClientRect();
        if (a.left < b.right - slack && b.left < a.right - slack && a.top + 2 < b.top && b.bottom < a.bottom - 2) wrong.push(`a line runs through "${word}"`);
      }
    });
  }
  return wrong;
}

(async () => {
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'] });
  const say = (ok, what, why) => console.log(JSON.stringify({ ok, what, why }));
  for (const file of files) {
    const page = await browser.newPage({ deviceScaleFactor: 2 });
    const asked = [];
    page.on('request', r => asked.push(r.url()));
    await page.goto('file://' + file);
    // Letter and A4 between margins of 14 mm, at 96 px to the inch.
    for (const [what, width, paper] of [['phone', 360, false], ['desk', 816, false], ['letter', 710, true], ['a4', 687, true]]) {
      await page.emulateMedia({ media: paper ? 'print' : 'screen' });
      await page.setViewportSize({ width, height: 1056 });
      const wrong = await page.evaluate(faults, { paper, legible: Number(legible) });
      say(wrong.length === 0, `${name(file)} ${what}`, wrong.slice(0, 5));
      await page.screenshot({ path: `${out}/${name(file)}-${what}.png`, fullPage: true });
      if (what !== 'desk') continue;
      for (const [i, which] of ['plan', 'before'].entries())
        await page.locator('figure svg').nth(i).screenshot({ path: `${out}/${name(file)}-${which}.png` });
    }
    await page.emulateMedia({ media: 'print' });
    for (const format of ['Letter', 'A4']) {
      const pdf = await page.pdf({ format, printBackground: true });
      say(pdf.length > 5000, `${name(file)} prints on ${format}`, []);
    }
    say(asked.length === 1 && asked[0] === 'file://' + file, `${name(file)} asks for nothing`, asked);
    if (file !== files[0]) { await page.close(); continue; }
    await page.emulateMedia({ media: 'screen' });
    const spoil = async (what, how) => {
      await page.goto('file://' + file);
      await page.evaluate(how);
      const wrong = await page.evaluate(faults, { paper: false, legible: 0 });
      say(wrong.length > 0, `${what} is noticed`, []);
    };
    await spoil('a label on another', () => { const [a, b] = document.querySelectorAll('figure svg text'); for (const k of ['x', 'y', 'text-anchor']) a.setAttribute(k, b.getAttribute(k)); });
    await spoil('a red label', () => document.querySelector('figure svg text').style.fill = '#c00');
    await page.close();
  }
  await browser.close();
})();
"""


def sheets():
    """One HTML sheet a scenario; the first two figures on it are the plan and what was there before, in either order."""
    catalog = os.path.join(OUT, "catalog.db")
    subprocess.run([ENDBELL, "catalog", "import", os.path.join(SCENARIOS, "shelf"), "--into", catalog], check=True, stdout=subprocess.DEVNULL)
    files = []
    folders = {name.split("-", 1)[1]: os.path.join(SCENARIOS, name) for name in os.listdir(SCENARIOS) if name[:2].isdigit()}
    for name in DRAWN:
        with open(os.path.join(folders[name], "expected.json"), encoding="utf-8") as f:
            part = json.load(f)["part"]
        file = os.path.join(OUT, name + ".html")
        subprocess.run([ENDBELL, "--catalog", catalog, "sheet", os.path.join(folders[name], "job.toml"), part, "--html", file],
                       stdout=subprocess.DEVNULL, check=False)
        files.append(file)
    return files


def main():
    os.makedirs(TOOLS, exist_ok=True)
    os.makedirs(OUT, exist_ok=True)
    if not os.path.isdir(os.path.join(TOOLS, "node_modules", "playwright-core")):
        subprocess.run(["npm", "install", "--silent", "--no-audit", "--no-fund", "--prefix", TOOLS, "playwright-core@1"], check=True)
    with open(os.path.join(TOOLS, "check.js"), "w", encoding="utf-8") as f:
        f.write(CHECKER)
    files = sheets()
    out = subprocess.run(["node", os.path.join(TOOLS, "check.js"), OUT, str(LEGIBLE), *files], capture_output=True, text=True, check=False)
    passed = failed = 0
    for line in out.stdout.splitlines():
        row = json.loads(line)
        passed, failed = (passed + 1, failed) if row["ok"] else (passed, failed + 1)
        if not row["ok"]:
            print(f"FAIL {row['what']}: {'; '.join(row['why'])}")
    wanted = 7 * len(files) + 2
    if passed + failed != wanted:
        print(f"FAIL {passed + failed} checks of {wanted} ran: {out.stderr.strip()[:600]}")
        failed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
