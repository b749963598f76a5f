/** A shortlist as a file: the document that is exported and imported, its schema, and the answer without a browser. */
@NullMarked
package org.keelweigh.exchange;

import org.jspecify.annotations.NullMarked;
