/** The drawings: a component for each, with the small ready-to-draw record it takes and its numbers as a table. */
@NullMarked
package org.keelweigh.ui.chart;

import org.jspecify.annotations.NullMarked;
