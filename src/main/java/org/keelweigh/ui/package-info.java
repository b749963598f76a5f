/** What people see: views, and the components they are made of. */
@NullMarked
package org.keelweigh.ui;

import org.jspecify.annotations.NullMarked;
