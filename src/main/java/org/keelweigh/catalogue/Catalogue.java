package org.keelweigh.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where catalogue tables come from: the ones shipped with Keelweigh, each of which a shop can replace by a file of the
 * same name in a folder of its own.
 */
public final class Catalogue {

    private static final String SHIPPED = "/catalogue/";

    private final @Nullable Path shopFolder;

    private Catalogue(@Nullable Path shopFolder) {
        this.shopFolder = shopFolder;
    }

    /** Makes the catalogue of the shipped tables alone. */
    public static Catalogue shipped() {
        return new Catalogue(null);
    }

    /**
     * Makes a catalogue in which tables found in {@code folder} replace the shipped ones, file by file.
     *
     * @param folder a folder; it may lack any or all tables
     * @throws IllegalArgumentException if there is no such folder, because to go on with the shipped tables would look as if
     *     the shop's own were in use
     */
    public static Catalogue withShopFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new IllegalArgumentException(
                    Files.exists(folder)
                            ? "The catalogue folder " + folder + " is a file; name the folder with the tables in it."
                            : "There is no catalogue folder " + folder + ".");
        }
        return new Catalogue(folder);
    }

    /**
     * Reads the table {@code name}.
     *
     * @param name the file's name without folder, such as {@code checks.csv}
     * @throws CatalogueException if the file is not a table with a heading line
     * @throws IllegalArgumentException if no such table exists
     * @throws UncheckedIOException if the file cannot be read
     */
    public Table table(String name) {
        try (Reader reader = open(name)) {
            return Table.read(name, reader);
        } catch (IOException e) {
            throw new UncheckedIOException("The catalogue table " + name + " could not be read", e);
        }
    }

    private Reader open(String name) throws IOException {
        Optional<Path> own = Optional.ofNullable(shopFolder)
                .map(folder -> folder.resolve(name))
                .filter(Files::isRegularFile);
        if (own.isPresent()) {
            return Files.newBufferedReader(own.get(), StandardCharsets.UTF_8);
        }
        InputStream shipped = Catalogue.class.getResourceAsStream(SHIPPED + name);
        if (shipped == null) {
            throw new IllegalArgumentException("There is no catalogue table named " + name);
        }
        return new InputStreamReader(shipped, StandardCharsets.UTF_8);
    }
}
