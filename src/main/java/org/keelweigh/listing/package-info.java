/**
 * Recognises facts in the text of a pasted classified listing and proposes them with the words they came from.
 * Nothing is applied here.
 *
 * @see <a href="../../../../../../docs/method/listing-text.md">docs/method/listing-text.md</a>
 */
@NullMarked
package org.keelweigh.listing;

import org.jspecify.annotations.NullMarked;
