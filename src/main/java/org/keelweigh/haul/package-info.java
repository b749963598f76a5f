/** Getting the boat to the water: carts, surfaces, slopes, statics, lifting, roof rack and trailer. */
@NullMarked
package org.keelweigh.haul;

import org.jspecify.annotations.NullMarked;
