package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TextPageTests {

    private final TextPage page = new TextPage();

    @Test
    void wrapsASentenceWithAHangingIndent() {
        page.item(3, "word ".repeat(30));

        List<String> lines = page.text().lines().toList();
        // 3 columns of indent and 18 words of 5 columns make 92; a nineteenth would need 97
        assertThat(lines).hasSize(2);
        assertThat(lines.getFirst()).isEqualTo("   " + "word ".repeat(18).strip());
        assertThat(lines.getLast()).isEqualTo("     " + "word ".repeat(12).strip());
    }

    @Test
    void keepsAUnitWithItsNumber() {
        page.say("x".repeat(TextPage.WIDTH - 3) + " 98 % of it");

        assertThat(page.text().lines()).last().isEqualTo("98 % of it");
    }

    @Test
    void breaksAWordThatIsLongerThanALine() {
        page.say("x".repeat(2 * TextPage.WIDTH + 5));

        assertThat(page.text().lines()).extracting(String::length).containsExactly(TextPage.WIDTH, TextPage.WIDTH, 5);
    }

    @Test
    void writesATextBesideAFigure() {
        page.beside("  $100  ", "word ".repeat(30));

        assertThat(page.text().lines().toList().getFirst()).startsWith("  $100  word");
        assertThat(page.text().lines().toList().getLast()).startsWith("        word");
    }

    @Test
    void breaksATableWithManyColumnsIntoBlocks() {
        List<String> columns =
                IntStream.rangeClosed(1, 10).mapToObj(String::valueOf).toList();
        page.table(
                columns,
                List.of(new TextPage.Row("A boat with a name that is far too long", Collections.nCopies(10, "50 %"))));

        List<String> lines = page.text().lines().toList();
        assertThat(lines).hasSize(4).allSatisfy(line -> assertThat(line.length())
                .isLessThanOrEqualTo(TextPage.WIDTH));
        assertThat(lines.get(0).strip().split(" +")).containsExactly("1", "2", "3", "4", "5", "6", "7");
        assertThat(lines.get(2).strip().split(" +")).containsExactly("8", "9", "10");
        assertThat(lines.get(1))
                .startsWith("   A boat with a name")
                .contains("…")
                .endsWith("50 %");
    }

    @Test
    void underlinesATitleByItsCharacters() {
        page.title("Größe 🛶", '=');

        assertThat(page.text()).isEqualTo("\nGröße 🛶\n=======\n");
    }
}
