/** Money over time: cash flows, discounting, depreciation, the price book, five-year cost of ownership. */
@NullMarked
package org.keelweigh.cost;

import org.jspecify.annotations.NullMarked;
