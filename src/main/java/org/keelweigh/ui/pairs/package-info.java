/** Comparing what matters two at a time: questions, answers and the points that follow, for every page that sets weights. */
@NullMarked
package org.keelweigh.ui.pairs;

import org.jspecify.annotations.NullMarked;
