// engine/words: how the trade writes values: one reader for job files, plate text and catalog cells, and one printer.
// Each reader is a function of the field's text and gives one of four outcomes (read.hpp); write.hpp prints values so
// that they read back.
#pragma once
#include "engine/words/air.hpp"
#include "engine/words/electrical.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/kinds.hpp"
#include "engine/words/number.hpp"
#include "engine/words/plain.hpp"
#include "engine/words/power.hpp"
#include "engine/words/read.hpp"
#include "engine/words/size.hpp"
#include "engine/words/terminals.hpp"
#include "engine/words/turning.hpp"
#include "engine/words/write.hpp"
