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
     * IRS Publication 946, app. A, table A-1, 3-, 5- and 7-year property: double declining balance that turns to a
     * straight line, half a year in the first and last year. The 3-year row is from memory. The printed rounding is not
     * that of the formula, hence 0.006.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 33.33 44.45 14.81 7.41",
        "5, 20 32 19.2 11.52 11.52 5.76",
        "7, 14.29 24.49 17.49 12.49 8.93 8.92 8.93 4.46"
    })
    void givesTheYearsOfTheTaxTable(int years, String printed) {
        double left = 100;
        double yearsLeft = years;
        for (String share : printed.split(" ")) {
            double part = yearsLeft == years ? 0.5 : 1;
            double declining = new BookDepreciation(left, 0, years).decliningBalance(1, 2);
            double amount = Math.min(left, part * Math.max(declining, left / yearsLeft));
            assertThat(amount).isCloseTo(Double.parseDouble(share), within(0.006));
            left -= amount;
            yearsLeft = Math.max(0.5, yearsLeft - part);
        }
        assertThat(left).isCloseTo(0, within(1e-9));
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
