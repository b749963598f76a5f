/** Second opinions by other methods. They may reverse ranks when the list changes, so they never decide. */
@NullMarked
package org.keelweigh.decision.opinion;

import org.jspecify.annotations.NullMarked;
