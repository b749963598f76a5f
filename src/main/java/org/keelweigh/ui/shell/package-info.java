/** The frame around every page: header, navigation, errors, news of other people's edits. */
@NullMarked
package org.keelweigh.ui.shell;

import org.jspecify.annotations.NullMarked;
