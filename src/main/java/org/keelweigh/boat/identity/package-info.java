/**
 * Reads the identification number moulded or riveted into a hull and compares it with what a seller claims.
 *
 * @see <a href="../../../../../../../docs/method/identity.md">docs/method/identity.md</a>
 */
@NullMarked
package org.keelweigh.boat.identity;

import org.jspecify.annotations.NullMarked;
