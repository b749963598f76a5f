package org.keelweigh.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.quantity.Estimate;

class FieldMergeTests {

    private static final Finding FINE = Finding.of("hull-crack", Outcome.FINE);
    private static final Finding MAJOR = Finding.of("hull-crack", Outcome.MAJOR);
    private static final Finding STOP = Finding.of("hull-crack", Outcome.STOP);

    @Test
    void takesWhatOnlyTheSheetKnows() {
        FieldMerge merge = FieldMerge.of(List.of(), List.of(Finding.of("hull-uv", Outcome.MINOR)), List.of(MAJOR));

        assertThat(merge).isEqualTo(new FieldMerge(List.of(MAJOR), List.of(), 0));
    }

    @Test
    void takesWhatOnlyTheSheetChanged() {
        assertThat(FieldMerge.of(List.of(FINE), List.of(FINE), List.of(MAJOR)).taken())
                .containsExactly(MAJOR);
    }

    @Test
    void asksWhereBothChanged() {
        FieldMerge merge = FieldMerge.of(List.of(FINE), List.of(MAJOR), List.of(STOP));

        assertThat(merge.taken()).isEmpty();
        assertThat(merge.choices()).containsExactly(new FieldMerge.Choice("hull-crack", MAJOR, STOP));
    }

    @Test
    void asksWhereTheAppTookAFindingAway() {
        FieldMerge merge = FieldMerge.of(List.of(FINE), List.of(), List.of(MAJOR));

        assertThat(merge.choices()).hasSize(1);
        assertThat(merge.choices().getFirst().mine()).isEmpty();
    }

    @Test
    void countsWhatBothSay() {
        assertThat(FieldMerge.of(List.of(), List.of(MAJOR), List.of(MAJOR)).same())
                .isEqualTo(1);
    }

    @Test
    void keepsNoteAndQuoteThatACodeCannotCarry() {
        Finding rich = new Finding(
                "hull-crack", Outcome.MAJOR, Method.SECOND_PERSON, 4.0, "by the seat", new Estimate(40, 80, 150));

        assertThat(FieldMerge.of(List.of(rich), List.of(rich), List.of(MAJOR)))
                .isEqualTo(new FieldMerge(List.of(), List.of(), 1));
    }

    @Test
    void takesANewNoteOnAnOldOutcome() {
        Finding noted = new Finding("hull-crack", Outcome.MAJOR, Method.TOUCHED, null, "longer now", null);

        assertThat(FieldMerge.of(List.of(MAJOR), List.of(MAJOR), List.of(noted)).taken())
                .containsExactly(noted);
    }

    @Test
    void leavesAloneWhatTheSheetDoesNotName() {
        assertThat(FieldMerge.of(List.of(FINE), List.of(MAJOR), List.of()))
                .isEqualTo(new FieldMerge(List.of(), List.of(), 0));
    }
}
