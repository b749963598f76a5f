/** Photos on pages: taking them in, showing them small, opening, captioning and deleting them. */
@NullMarked
package org.keelweigh.ui.photo;

import org.jspecify.annotations.NullMarked;
