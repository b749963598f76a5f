/** The page about trip and people: how, where and by whom the boats will be used. */
@NullMarked
package org.keelweigh.ui.trip;

import org.jspecify.annotations.NullMarked;
