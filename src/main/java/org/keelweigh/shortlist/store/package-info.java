/** Keeps the aggregates in a relational database: one row each, with its document and its version. */
@NullMarked
package org.keelweigh.shortlist.store;

import org.jspecify.annotations.NullMarked;
