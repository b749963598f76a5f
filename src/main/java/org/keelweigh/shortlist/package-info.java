/** What is kept: shortlists with their candidates, people and trip, who changed what, and how two people's edits are brought together. */
@NullMarked
package org.keelweigh.shortlist;

import org.jspecify.annotations.NullMarked;
