package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BookDepreciationTests {

    /** The worked examples of the standard spreadsheet functions SLN, SYD and DDB, printed to the cent. */
    @ParameterizedTest
    @CsvSource({
        "sln, 30000, 7500, 10, 1, 0, 2250",
        "syd, 30000, 7500, 10, 1, 0, 4090.91",
        "syd, 30000, 7500, 10, 5, 0, 2454.55",
        "syd, 30000, 7500, 10, 10, 0, 409.09",
        "syd, 1000, 100, 5, 1, 0, 300",
        "syd, 1000, 100, 5, 5, 0, 60",
        "ddb, 2400, 300, 10, 1, 2, 480",
        "ddb, 2400, 300, 10, 2, 2, 384",
        "ddb, 2400, 300, 10, 2, 1.5, 306",
        "ddb, 2400, 300, 10, 10, 2, 22.12",
        "ddb, 2400, 300, 120, 1, 2, 40",
        "ddb, 2400, 300, 3650, 1, 2, 1.32"
    })
    void givesTheSpreadsheetExamples(
            String method, double cost, double salvage, int years, int year, double factor, double amount) {
        BookDepreciation book = new BookDepreciation(cost, salvage, years);
        double computed =
                switch (method) {
                    case "sln" -> book.straightLine();
                    case "syd" -> book.sumOfYears(year);
                    default -> book.decliningBalance(year, factor);
                };
        assertThat(computed).isCloseTo(amount, within(0.005));
    }

    /** The printing press of Franklin, Graybeal, Cooper, Principles of Accounting 1, OpenStax 2019 (from memory). */
    @Test
    void writesOffThePress() {
        BookDepreciation press = new BookDepreciation(58_000, 10_000, 5);
        assertThat(press.straightLine()).isEqualTo(9600);
        double[] doubled = {23_200, 13_920, 8_352, 2_528, 0};
        double[] digits = {16_000, 12_800, 9_600, 6_400, 3_200};
        for (int p = 1; p <= 5; p++) {
            assertThat(press.decliningBalance(p, 2)).isCloseTo(doubled[p - 1], within(0.005));
            assertThat(press.sumOfYears(p)).isCloseTo(digits[p - 1], within(0.005));
        }
    }

    /** The fixed-rate declining balance of the spreadsheet function DB rounds this rate to 0.319. */
    @Test
    void givesTheRateOfTheSpreadsheetExample() {
        assertThat(new BookDepreciation(1_000_000, 100_000, 6).constantRate()).isCloseTo(0.319, within(0.0005));
    }

    /**
     * IRS Publication 946, app. A, table A-1, 5-year property: double declining balance that turns to a straight line,
     * half a year in the first and last year. The switch is worked here; the first four years are the plain method.
     */
    @Test
    void givesTheDecliningYearsOfTheTaxTable() {
        double[] printed = {20, 32, 19.2, 11.52};
        BookDepreciation balance = new BookDepreciation(100, 0, 5);
        double firstHalf = balance.decliningBalance(1, 2) / 2;
        assertThat(firstHalf).isCloseTo(printed[0], within(0.006));
        BookDepreciation rest = new BookDepreciation(100 - firstHalf, 0, 5);
        for (int p = 1; p <= 3; p++) {
            assertThat(rest.decliningBalance(p, 2)).isCloseTo(printed[p], within(0.006));
        }
        double left = 100 - 20 - 32 - 19.2 - 11.52;
        assertThat(left / 1.5).as("straight line over the last 1.5 years").isCloseTo(11.52, within(0.006));
    }

    /** Constructed: 900 falls to 400 in five years. */
    @Test
    void fallsAtAConstantRate() {
        double rate = new BookDepreciation(900, 400, 5).constantRate();
        assertThat(rate).isCloseTo(0.149717, within(1e-6));
        double[] values = {900.0, 765.2547, 650.6831, 553.2647, 470.4316, 400.0};
        for (int k = 0; k <= 5; k++) {
            assertThat(900 * Math.pow(1 - rate, k)).isCloseTo(values[k], within(1e-4));
        }
    }

    @Property
    void writesOffNoMoreThanWasLost(
            @ForAll @DoubleRange(min = 0, max = 1e4) double salvage,
            @ForAll @DoubleRange(min = 0, max = 1e4) double lost,
            @ForAll @IntRange(min = 2, max = 30) int years) {
        BookDepreciation book = new BookDepreciation(salvage + lost, salvage, years);
        double digits =
                IntStream.rangeClosed(1, years).mapToDouble(book::sumOfYears).sum();
        double declining = IntStream.rangeClosed(1, years)
                .mapToDouble(p -> book.decliningBalance(p, 2))
                .sum();
        assertThat(digits).isCloseTo(lost, within(1e-6));
        assertThat(book.straightLine() * years).isCloseTo(lost, within(1e-6));
        assertThat(declining).isLessThanOrEqualTo(lost + 1e-6);
    }

    @Test
    void refusesImpossibleBooks() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BookDepreciation(100, 200, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> new BookDepreciation(100, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new BookDepreciation(100, 0, 5).sumOfYears(6));
    }
}
