package org.keelweigh.ui.boat;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Check;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.photo.PhotoUpload;

/** The photos of a boat, those of single checks among them. */
final class PhotosPart extends BoatPart {

    private final PhotoStrip strip;

    PhotosPart(BoatDesk desk) {
        super(desk);
        strip = new PhotoStrip(desk.album(), photo -> subject(photo.check()));
        PhotoUpload upload = PhotoUpload.into(desk.album(), desk.candidate().id(), null);
        add(Plain.sheet(
                "Photos of the boat",
                Plain.soft(
                        "Photos of one check are taken beside that check, here under Inspection or on the visit. The "
                                + "place where a photo was taken is not kept."),
                strip,
                upload));
        refresh();
    }

    @Override
    void saved() {
        refresh();
    }

    @Override
    void refresh() {
        strip.show(desk().album().photos(desk().candidate().id()));
    }

    private String subject(@Nullable String check) {
        return Optional.ofNullable(check)
                .flatMap(desk().catalogues().inspection()::check)
                .map(Check::title)
                .orElse(desk().data().name());
    }
}
