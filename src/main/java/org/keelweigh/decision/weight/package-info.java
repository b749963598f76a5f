/** Ways to ask for weights: swings, a plain order, and comparison in pairs. */
@NullMarked
package org.keelweigh.decision.weight;

import org.jspecify.annotations.NullMarked;
