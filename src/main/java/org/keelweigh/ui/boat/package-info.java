/** A boat's page: its facts, inspection, costs, haul, fit, trust and history, one section each. */
@NullMarked
package org.keelweigh.ui.boat;

import org.jspecify.annotations.NullMarked;
