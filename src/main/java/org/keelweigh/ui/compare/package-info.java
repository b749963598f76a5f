/** The dashboard: which boat leads, why, and what would change it. */
@NullMarked
package org.keelweigh.ui.compare;

import org.jspecify.annotations.NullMarked;
