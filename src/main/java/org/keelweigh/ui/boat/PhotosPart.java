package org.keelweigh.ui.boat;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Check;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.photo.PhotoUpload;
import org.keelweigh.ui.shell.Visitor;

/** The photos of a boat, those of single checks among them. */
final class PhotosPart extends BoatPart {

    private final PhotoStrip strip;

    PhotosPart(BoatDesk desk) {
        super(desk);
        strip = new PhotoStrip(desk.album(), photo -> subject(photo.check()));
        PhotoUpload upload = new PhotoUpload(Visitor::name, (picture, who) -> desk.album()
                .add(desk.candidate().id(), null, picture, who)
                .map(photo -> "The photo is saved.")
                .orElse("This boat has as many photos as are kept. Delete one first."));
        add(Plain.sheet(
                "Photos of the boat",
                Plain.soft("Photos of one check are taken on the visit, beside that check. The place where a photo was "
                        + "taken is not kept."),
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
