/** The first page: all shortlists, the example, and starting one's own. */
@NullMarked
package org.keelweigh.ui.shortlists;

import org.jspecify.annotations.NullMarked;
