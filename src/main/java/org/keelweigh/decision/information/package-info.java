/**
 * Expected value of information: what learning a fact before choosing is worth, in the unit of the values given, and
 * which checks to make first. Throughout {@code 0 <= EVSI <= EVPPI <= EVPI}.
 */
@NullMarked
package org.keelweigh.decision.information;

import org.jspecify.annotations.NullMarked;
