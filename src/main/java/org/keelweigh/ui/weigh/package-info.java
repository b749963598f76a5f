/** The weighing page: what matters to each person who decides, blind until all are done. */
@NullMarked
package org.keelweigh.ui.weigh;

import org.jspecify.annotations.NullMarked;
