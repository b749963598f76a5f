/** Several people's weights on the same values: where they differ and which choices both can live with. */
@NullMarked
package org.keelweigh.decision.group;

import org.jspecify.annotations.NullMarked;
