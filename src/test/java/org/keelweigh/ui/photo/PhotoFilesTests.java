package org.keelweigh.ui.photo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:visit")
class PhotoFilesTests {

    @Autowired
    ShortlistEditing editing;

    @Autowired
    PhotoAlbum album;

    @Autowired
    PhotoFiles files;

    @Test
    void servesPicturesAsPicturesOnly() {
        Photo photo = photo();

        ResponseEntity<byte[]> answer = files.picture(photo.id().toString());

        assertThat(answer.getStatusCode().value()).isEqualTo(200);
        assertThat(answer.getBody()).isEqualTo(new byte[] {1, 2, 3});
        assertThat(answer.getHeaders().getContentType()).isEqualTo(MediaType.IMAGE_JPEG);
        assertThat(answer.getHeaders().getFirst("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(answer.getHeaders().getFirst("Content-Security-Policy")).contains("sandbox");
        assertThat(files.thumbnail(photo.id().toString()).getBody()).isEqualTo(new byte[] {4});
    }

    @Test
    void servesDeletedPhotosNoMore() {
        Photo photo = photo();
        album.delete(photo.id(), "Wren");

        assertThat(files.picture(photo.id().toString()).getStatusCode().value()).isEqualTo(404);
        assertThat(files.thumbnail(photo.id().toString()).getStatusCode().value())
                .isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "..", "' or 1=1", "6f2c1f0e-0000-4000-8000-0000000000aa"})
    void knowsNoOtherAddresses(String id) {
        assertThat(files.picture(id).getStatusCode().value()).isEqualTo(404);
    }

    @Test
    void answersWhatIsNoPictureInASentence() {
        PhotoUpload upload = new PhotoUpload(() -> "Wren", (picture, who) -> who + " has saved it.");

        upload.take(new PictureReading.Refused("This is not a picture."));
        assertThat(upload.answer()).isEqualTo("This is not a picture.");

        upload.take(new PictureReading.Accepted(new byte[1], new byte[1], 4, 3));
        assertThat(upload.answer()).isEqualTo("Wren has saved it.");
    }

    private Photo photo() {
        Shortlist list = editing.create(ShortlistData.named("Photos"), "Wren");
        Candidate boat = editing.add(list.id(), CandidateData.of("Green", BoatKind.CANOE), "Wren");
        return album.add(
                        boat.id(),
                        null,
                        new PictureReading.Accepted(new byte[] {1, 2, 3}, new byte[] {4}, 4, 3),
                        "Wren")
                .orElseThrow();
    }
}
