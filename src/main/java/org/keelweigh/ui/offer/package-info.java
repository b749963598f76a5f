/** What to offer for each boat, with the arguments for it. */
@NullMarked
package org.keelweigh.ui.offer;

import org.jspecify.annotations.NullMarked;
