/**
 * Decision analysis with several criteria, free of any subject: criteria, value functions on fixed
 * ranges, weights, the additive model with its ranking, dominance and the cost–value frontier.
 *
 * <p>Conventions. Values run from 0 (worst) to 100 (best) per criterion. A matrix is
 * {@code double[alternative][criterion]}; weights in an array stand in the same column order and sum
 * to one. A flag array {@code ruledOut[alternative]} marks alternatives that may not be chosen
 * whatever their value. Two totals closer than {@link Ranks#TIE} count as equal.
 *
 * <pre>{@code
 * double[][] values = criteria.values(measures);
 * double[] weights = stated.toArray(criteria);
 * Ranking ranking = AdditiveModel.rank(values, weights, ruledOut);
 * }</pre>
 *
 * <p>Sub-packages: {@code weight} (eliciting weights), {@code robust} (what the answer depends on),
 * {@code opinion} (other methods as a cross-check), {@code group} (several people). Formulas, sources and
 * traps: {@code docs/method/decision.md}.
 */
@NullMarked
package org.keelweigh.decision;

import org.jspecify.annotations.NullMarked;
