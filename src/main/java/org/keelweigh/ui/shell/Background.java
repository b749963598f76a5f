package org.keelweigh.ui.shell;

/** Does slow work off the thread that draws. What it finds has to be shown through {@code UI.access}. */
@FunctionalInterface
public interface Background {

    /** Does the work soon, in its turn. */
    void run(Runnable work);
}
