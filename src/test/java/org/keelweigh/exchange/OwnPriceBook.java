package org.keelweigh.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A shop's folder whose price book differs from the shipped one in the fee for a day at the launch: 6 instead of 5. */
final class OwnPriceBook {

    /**
     * What a dollar more for each of the example's 14 outings a year comes to over five years at 2 %: 14 times the factor for
     * equal yearly payments, 4.7135 (NIST Handbook 135, uniform present value).
     */
    static final double DEARER = 14 * 4.713460;

    private static final String SHIPPED = "launch-parking,launching and parking,running,outing,,,,,0,5,20,";

    private OwnPriceBook() {}

    static Path in(Path folder) {
        try {
            String own = shipped().replace(SHIPPED, SHIPPED.replace("0,5,20", "0,6,20"));
            Files.writeString(folder.resolve("price-book.csv"), own);
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String shipped() throws IOException {
        return Files.readString(Path.of("src/main/resources/catalogue/price-book.csv"));
    }
}
