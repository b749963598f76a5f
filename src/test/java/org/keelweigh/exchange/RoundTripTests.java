package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.keelweigh.catalogue.Catalogue;

class RoundTripTests {

    private static final ShortlistImport IMPORT = new ShortlistImport(Catalogue.shipped(), 2026);
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(RoundTripTests.class.getResourceAsStream("/schema/shortlist.schema.json"));

    @Property(tries = 300, seed = "20260101")
    void givesBackWhatWasExported(@ForAll long seed) {
        ShortlistDocument document = new RandomDocuments(seed).next();

        assertThat(IMPORT.read(ShortlistExport.of(document)))
                .isInstanceOfSatisfying(ImportResult.Ready.class, ready -> assertThat(ready.document())
                        .isEqualTo(document));
    }

    @Property(tries = 100, seed = "20260102")
    void exportsWhatAnIndependentValidatorAccepts(@ForAll long seed) {
        String text = ShortlistExport.of(new RandomDocuments(seed).next());

        assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
    }

    @Property(tries = 50, seed = "20260103")
    void writesTheSameTextForTheSameFacts(@ForAll long seed) {
        String once = ShortlistExport.of(new RandomDocuments(seed).next());

        assertThat(ShortlistExport.of(new RandomDocuments(seed).next())).isEqualTo(once);
    }

    @Property(tries = 200, seed = "20260104")
    void refusesEveryFileThatIsCutOff(@ForAll long seed, @ForAll int cut) {
        byte[] whole = ShortlistExport.of(new RandomDocuments(seed).next()).getBytes(StandardCharsets.UTF_8);
        byte[] part = new byte[Math.floorMod(cut, whole.length - 2)];
        System.arraycopy(whole, 0, part, 0, part.length);

        assertThat(IMPORT.read(part)).isInstanceOf(ImportResult.Refused.class);
    }
}
