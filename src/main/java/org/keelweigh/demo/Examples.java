package org.keelweigh.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.keelweigh.exchange.ImportResult;
import org.keelweigh.exchange.ImportService;
import org.keelweigh.exchange.ShortlistImport;
import org.keelweigh.shortlist.ShortlistId;
import org.springframework.stereotype.Service;

/** Loads examples into the store. */
@Service
public class Examples {

    private final ShortlistImport reading;
    private final ImportService importing;

    Examples(ShortlistImport reading, ImportService importing) {
        this.reading = reading;
        this.importing = importing;
    }

    /** Lists the examples there are. */
    public List<Example> all() {
        return List.of(Example.values());
    }

    /** Loads a fresh copy of an example, so that every visitor can change their own. */
    public ShortlistId load(Example example, String who) {
        return switch (reading.read(bytes(example))) {
            case ImportResult.Ready ready -> importing.copyInto(ready.document(), who);
            case ImportResult.Refused refused ->
                throw new IllegalStateException(example.resource() + ": "
                        + refused.problems().getFirst().message());
        };
    }

    private static byte[] bytes(Example example) {
        try (InputStream in = Examples.class.getResourceAsStream(example.resource())) {
            return Objects.requireNonNull(in, example.resource()).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(example.resource() + " could not be read", e);
        }
    }
}
