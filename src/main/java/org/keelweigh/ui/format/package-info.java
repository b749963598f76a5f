/** Fields that read and write quantities in people's units, and other small parts that every view shares. */
@NullMarked
package org.keelweigh.ui.format;

import org.jspecify.annotations.NullMarked;
