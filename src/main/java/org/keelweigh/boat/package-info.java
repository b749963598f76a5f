/** What a boat is: kind, material, drive, dimensions, and the masses it is made of with where they sit. */
@NullMarked
package org.keelweigh.boat;

import org.jspecify.annotations.NullMarked;
