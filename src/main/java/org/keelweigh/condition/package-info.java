/** The inspection catalogue, what was found, the hidden causes behind faults, and the signals a listing and its seller give. */
@NullMarked
package org.keelweigh.condition;

import org.jspecify.annotations.NullMarked;
