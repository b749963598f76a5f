/** Keelweigh's starting point: the application class, which is also the shell of every page. */
@NullMarked
package org.keelweigh;

import org.jspecify.annotations.NullMarked;
