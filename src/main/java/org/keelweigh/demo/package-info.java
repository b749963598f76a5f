/** The examples that a first visitor can look at. */
@NullMarked
package org.keelweigh.demo;

import org.jspecify.annotations.NullMarked;
