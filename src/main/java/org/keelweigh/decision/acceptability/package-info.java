/**
 * Share of sampled futures and plausible weights in which each alternative takes each rank (stochastic
 * acceptability), with the weights that favour it and the error of every share.
 */
@NullMarked
package org.keelweigh.decision.acceptability;

import org.jspecify.annotations.NullMarked;
