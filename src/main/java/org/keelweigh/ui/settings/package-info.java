/** The settings page: the visitor's name, colours, backup, and where data and catalogues come from. */
@NullMarked
package org.keelweigh.ui.settings;

import org.jspecify.annotations.NullMarked;
