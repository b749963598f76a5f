package org.keelweigh.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
        // The name of the vocabulary of drawings looks like an address; nobody is asked for it.
        String sheet = FieldCases.sheet(FieldCases.boat(0), "Spring").replace("http://www.w3.org/2000/svg", "");

        assertThat(sheet).contains("default-src 'none'").doesNotContain("http://", "https://", "url(", "@import");
    }

    @Test
    void runsItsOwnScriptOnly() throws NoSuchAlgorithmException {
        String sheet = FieldCases.sheet(FieldCases.boat(0), "Spring");

        Matcher script =
                Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL).matcher(sheet);
        assertThat(script.find()).isTrue();
        byte[] digest =
                MessageDigest.getInstance("SHA-256").digest(script.group(1).getBytes(StandardCharsets.UTF_8));
        assertThat(sheet).contains("script-src 'sha256-" + Base64.getEncoder().encodeToString(digest) + "'");
        // A page's parser counts these inside a script too, and would end it elsewhere than the digest does.
        assertThat(script.group(1)).doesNotContain("<!--", "<script", "\r");
        assertThat(script.find()).isFalse();
    }

    @Test
    void namesWhoseCodeItCarries() {
        assertThat(FieldCases.sheet(FieldCases.boat(0), "Spring"))
                .contains("Copyright (c) 2023 Paul Miller", "SPDX-License-Identifier: MIT OR Apache-2.0");
    }

    @Test
    void drawsThePictureOfACodeBlackOnWhiteInAnyColours() {
        assertThat(FieldCases.sheet(FieldCases.boat(0), "Spring"))
                .containsPattern(
                        "<svg class=\"picture\" role=\"img\"[^>]*><rect [^>]*fill=\"#fff\"/><path fill=\"#000\"/>")
                .contains("forced-color-adjust: none");
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
