/** Takes pictures in: checks what they really are, shrinks them and leaves everything but the picture behind. */
@NullMarked
package org.keelweigh.picture;

import org.jspecify.annotations.NullMarked;
