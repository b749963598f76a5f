package org.keelweigh.shortlist;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** Copies everything that is kept, while it is in use. */
public interface DatabaseBackup {

    /** Tells in a sentence what to do instead where the program cannot copy the database itself; empty where it can. */
    Optional<String> instead();

    /** Tells how the file that {@link #writeTo} writes should be called, for a given day. */
    String fileName(String isoDay);

    /**
     * Writes a copy.
     *
     * @throws IOException if the copy cannot be made or written
     */
    void writeTo(OutputStream out) throws IOException;
}
