// The user's own file of settings, for what every command takes:
//     catalog = "~/shop/parts.db"
//     shop = "shop.toml"            # a relative path is seen from this file's folder
//     width = 100
// A flag comes before the environment, the environment before this file.
#pragma once
#include "cli/arguments.hpp"

namespace endbell::cli {

/// Fills what was not typed and not in the environment: from ENDBELL_CONFIG, else
/// $XDG_CONFIG_HOME/endbell/config.toml, else ~/.config/endbell/config.toml. No such file is fine, unless
/// ENDBELL_CONFIG names it. Throws BadData.
void settle(Arguments& typed);

}  // namespace endbell::cli
