/** What the answer depends on: weight stability, smallest change, tornado, break-even. */
@NullMarked
package org.keelweigh.decision.robust;

import org.jspecify.annotations.NullMarked;
