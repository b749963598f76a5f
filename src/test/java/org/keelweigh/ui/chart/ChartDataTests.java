package org.keelweigh.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ChartDataTests {

    private static final Figure TEN = new Figure(10, "10");
    private static final Figure ZERO = new Figure(0, "0");

    private static void rejects(ThrowingCallable call, String words) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(words);
    }

    @Test
    void figureRejectsWhatCannotBeDrawn() {
        rejects(() -> new Figure(Double.NaN, "?"), "finite");
        rejects(() -> new Figure(1, " "), "must not be blank");
    }

    @Test
    void spreadRejectsFallingFigures() {
        rejects(() -> new Spread(TEN, ZERO, TEN), "a spread must rise, was 10, 0, 10");
    }

    @Test
    void tableRejectsRaggedRows() {
        rejects(() -> new NumbersTable("c", List.of("a", "b"), List.of(List.of("1"))), "must have 2 cells, had 1");
    }

    @Nested
    class ValueBarsRecord {

        private ValueBarsData.Bar bar(String id, @Nullable String ruledOut) {
            return new ValueBarsData.Bar(id, "Boat " + id, TEN, List.of(), ruledOut);
        }

        @Test
        void rejectsRuledOutBoatsBeforeOthers() {
            rejects(
                    () -> new ValueBarsData("s", List.of(bar("a", "cracked"), bar("b", null))),
                    "Boat b must come before the ruled-out boats");
        }

        @Test
        void rejectsTheSameBoatTwice() {
            rejects(() -> new ValueBarsData("s", List.of(bar("a", null), bar("a", null))), "boat ids");
        }

        @Test
        void rejectsMoreThanAHundredPoints() {
            rejects(
                    () -> new ValueBarsData.Bar("a", "A", new Figure(101, "101"), List.of(), null),
                    "between 0.0 and 100.0, was 101.0");
        }
    }

    @Nested
    class CostValueRecord {

        private CostValueData.Point leader(String id) {
            return new CostValueData.Point(id, id, TEN, TEN, CostValueData.Standing.LEADER, null, null);
        }

        @Test
        void rejectsTwoLeaders() {
            rejects(
                    () -> new CostValueData("s", "cost", "value", List.of(leader("a"), leader("b")), null),
                    "at most one boat can lead, found 2");
        }

        @Test
        void rejectsPointsThatAreWorthNothing() {
            rejects(() -> new CostValueData.TradeOff(0, "free"), "cost per point must be above 0");
        }

        @Test
        void leavesUnknownSpreadsOutOfTheTable() {
            NumbersTable table = new CostValueData("s", "cost, €", "points", List.of(leader("a")), null).table();

            assertThat(table.rows()).containsExactly(List.of("a", "10", "–", "10", "–", "leads"));
        }
    }

    @Nested
    class CostBuildRecord {

        @Test
        void rejectsAResaleThatCosts() {
            rejects(() -> new CostBuildData.Boat("a", "A", List.of(TEN), TEN, TEN, null), "the resale of A");
        }

        @Test
        void rejectsAmountsThatDoNotMatchTheGroups() {
            CostBuildData.Boat boat = new CostBuildData.Boat("a", "A", List.of(TEN), ZERO, TEN, null);

            rejects(
                    () -> new CostBuildData("s", "€", List.of("price", "repairs"), List.of(boat)),
                    "A must have 2 amounts, had 1");
        }

        @Test
        void writesOneRowPerGroupAndOneColumnPerBoat() {
            Spread spread = new Spread(ZERO, TEN, new Figure(20, "20"));
            CostBuildData.Boat boat = new CostBuildData.Boat("a", "A", List.of(TEN), ZERO, TEN, spread);

            NumbersTable table = new CostBuildData("s", "€", List.of("price"), List.of(boat)).table();

            assertThat(table.columns()).containsExactly("group", "A");
            assertThat(table.rows())
                    .containsExactly(
                            List.of("price", "10"),
                            List.of("back when sold", "0"),
                            List.of("remains to pay", "10"),
                            List.of("8 times in 10", "could be 0 to 20"));
        }
    }

    @Nested
    class WeightStripsRecord {

        private WeightStripsData.Strip strip(double firstEnd, double secondStart) {
            return new WeightStripsData.Strip(
                    "cost",
                    TEN,
                    List.of(
                            new WeightStripsData.Segment(0, firstEnd, "a"),
                            new WeightStripsData.Segment(secondStart, 100, "b")),
                    "36 points more");
        }

        @Test
        void rejectsAGapBetweenSegments() {
            rejects(() -> strip(40, 46), "the start in percent of a segment of cost");
        }

        @Test
        void rejectsAWinnerNobodyKnows() {
            List<WeightStripsData.Winner> winners = List.of(new WeightStripsData.Winner("a", "A"));

            rejects(() -> new WeightStripsData("s", winners, List.of(strip(46, 46))), "no winner has the id b");
        }

        @Test
        void saysWhoLeadsWhere() {
            List<WeightStripsData.Winner> winners =
                    List.of(new WeightStripsData.Winner("a", "A"), new WeightStripsData.Winner("b", "B"));

            assertThat(new WeightStripsData("s", winners, List.of(strip(46, 46)))
                            .table()
                            .rows())
                    .containsExactly(List.of("cost", "10", "A from 0 to 46 %; B from 46 to 100 %", "36 points more"));
        }
    }

    @Nested
    class OtherRecords {

        @Test
        void differenceRejectsASumThatDoesNotAddUp() {
            DifferenceBarData.Row row = new DifferenceBarData.Row("cost", Family.MONEY, TEN);

            rejects(() -> new DifferenceBarData("s", "A", "B", "points", List.of(row), ZERO), "sum of the differences");
        }

        @Test
        void differenceSaysForWhomACriterionSpeaks() {
            Figure minus = new Figure(-10, "−10");
            DifferenceBarData data = new DifferenceBarData(
                    "s",
                    "A",
                    "B",
                    "points",
                    List.of(
                            new DifferenceBarData.Row("cost", Family.MONEY, TEN),
                            new DifferenceBarData.Row("speed", Family.WATER, minus),
                            new DifferenceBarData.Row("lift", Family.LAND, ZERO)),
                    ZERO);

            assertThat(data.table().rows()).extracting(List::getLast).containsExactly("A", "B", "neither", "A");
        }

        @Test
        void rankSharesRejectsSharesThatMissAHundred() {
            rejects(() -> new RankSharesData.Boat("a", "A", List.of(40.0, 40.0), "first in 40 of 100"), "was 80.0");
        }

        @Test
        void rankSharesAcceptsSharesRoundedToWholePercent() {
            assertThat(new RankSharesData.Boat("a", "A", List.of(33.0, 33.0, 33.0), "first in 33 of 100"))
                    .isNotNull();
        }

        @Test
        void costFanRejectsYearsOutOfOrder() {
            Spread spread = new Spread(ZERO, TEN, TEN);
            CostFanData.Year year = new CostFanData.Year(1, spread);

            rejects(() -> new CostFanData.Boat("a", "A", List.of(year, year)), "the years of A must rise");
        }

        @Test
        void offerCurveRejectsFallingPrices() {
            OfferCurveData.Point point = new OfferCurveData.Point(TEN, 50);

            rejects(
                    () -> new OfferCurveData("s", "€", List.of(point, point), List.of()),
                    "prices must rise after 10.0");
        }

        @Test
        void tornadoRejectsASwingTurnedRound() {
            rejects(
                    () -> new TornadoData.Bar("resale", TEN, "low", ZERO, "high", null),
                    "must not exceed the high one");
        }

        @Test
        void chanceGridRejectsAnythingButAHundredCells() {
            ChanceGridData.Group group = new ChanceGridData.Group("sound", 99, ChanceGridData.Tone.FINE);

            rejects(() -> new ChanceGridData.Panel("before", List.of(group)), "must be 100, were 99");
        }

        @Test
        void costDotsRejectsFallingDots() {
            rejects(() -> new CostDotsData.Boat("a", "A", List.of(2.0, 1.0), TEN, "words"), "the dots of A must rise");
        }

        @Test
        void cartDrawingRejectsAnAxleBehindTheStern() {
            CartDrawingData.Place place = new CartDrawingData.Place(1, 0.3);
            rejects(
                    () -> new CartDrawingData.Scene(
                            "a",
                            "A",
                            "one person can haul it",
                            new CartDrawingData.Hull(4, 0.4, "4.00 m"),
                            new CartDrawingData.Axle(-0.1, 0.15, "axle"),
                            place,
                            place,
                            new CartDrawingData.Slope(0, "level"),
                            new CartDrawingData.Forces(TEN, TEN, TEN, TEN)),
                    "the axle's station in m of A");
        }
    }
}
