/** Quantities with exact unit factors: mass, length, angle, force, money and three-point estimates. The leaf of the house. */
@NullMarked
package org.keelweigh.quantity;

import org.jspecify.annotations.NullMarked;
