/** Does this boat suit these people, this water, this home and this car. */
@NullMarked
package org.keelweigh.fit;

import org.jspecify.annotations.NullMarked;
