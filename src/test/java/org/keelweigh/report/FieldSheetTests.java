package org.keelweigh.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;

class FieldSheetTests {

    @Test
    void holdsEveryCheckOfTheBoat() {
        String sheet = FieldCases.sheet(FieldCases.boat(0), "Spring");

        assertThat(FieldCases.checks(FieldCases.boat(0)))
                .hasSizeGreaterThan(30)
                .extracting(Check::id)
                .allSatisfy(id -> assertThat(sheet).contains("\"id\":\"" + id + "\""));
        assertThat(sheet).doesNotContain("\"inf-valve\"");
    }

    @Test
    void asksNobodyForAnything() {
        String sheet = FieldCases.sheet(FieldCases.boat(0), "Spring");

        assertThat(sheet).contains("default-src 'none'").doesNotContain("http://", "https://", "url(", "@import");
        assertThat(sheet).containsPattern("script-src 'sha256-[A-Za-z0-9+/]{43}='");
    }

    @Test
    void writesWhatPeopleTypedAsTextOnly() {
        Finding hostile = new Finding(
                "hull-crack", Outcome.MAJOR, Method.TOUCHED, null, "</script><script>alert(1)</script>{{data}}", null);

        String sheet = FieldCases.sheet(FieldCases.boat(0, hostile), "</title><script>alert(2)</script>{{data}}");

        assertThat(sheet).doesNotContain("<script>alert").doesNotContain("</title><script>");
        assertThat(sheet).contains("\\u003cscript\\u003ealert(1)");
    }
}
