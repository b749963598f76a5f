package org.keelweigh.catalogue;

/** A catalogue table that cannot be used; the message names the file, the line and what to mend. */
public final class CatalogueException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the complaint.
     *
     * @param file the table's file name
     * @param line the line in that file, from 1; the heading is line 1 unless comments stand above it
     * @param complaint what is wrong and what would be right
     */
    public CatalogueException(String file, long line, String complaint) {
        super(file + ", line " + line + ": " + complaint);
    }
}
