/** The visit: what to prepare, one check after the other at the boat, and what came of it. */
@NullMarked
package org.keelweigh.ui.visit;

import org.jspecify.annotations.NullMarked;
