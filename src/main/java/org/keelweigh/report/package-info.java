/** What leaves the screen: the field sheet with its results, the visit record and the draft of a bill of sale. */
@NullMarked
package org.keelweigh.report;

import org.jspecify.annotations.NullMarked;
