/** Reads the catalogue tables and says in which file and line something is wrong. */
@NullMarked
package org.keelweigh.catalogue;

import org.jspecify.annotations.NullMarked;
