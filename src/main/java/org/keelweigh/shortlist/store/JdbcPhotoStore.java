package org.keelweigh.shortlist.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoId;
import org.keelweigh.shortlist.PhotoStore;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps photos in a relational database, the pixels apart from what is listed. */
@Repository
class JdbcPhotoStore implements PhotoStore {

    private static final String LISTED =
            "select id, candidate_id, check_id, caption, added_at, width, height, media_type, size_bytes from photo ";

    private final JdbcClient database;
    private final Clock clock;

    JdbcPhotoStore(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public void insert(Photo photo, byte[] picture, byte[] thumbnail) {
        database.sql("insert into photo (id, candidate_id, check_id, caption, added_at, width, height, media_type,"
                        + " size_bytes, picture, thumbnail) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        photo.id().value(),
                        photo.candidate().value(),
                        photo.check(),
                        photo.caption(),
                        photo.addedAt().atOffset(ZoneOffset.UTC),
                        photo.width(),
                        photo.height(),
                        photo.mediaType(),
                        photo.sizeBytes(),
                        picture,
                        thumbnail)
                .update();
    }

    @Override
    public Optional<Photo> find(PhotoId id) {
        return database.sql(LISTED + "where id = ?")
                .param(id.value())
                .query(JdbcPhotoStore::photo)
                .optional();
    }

    @Override
    public List<Photo> of(CandidateId candidate) {
        return database.sql(LISTED + "where candidate_id = ? and deleted_at is null order by added_at, id")
                .param(candidate.value())
                .query(JdbcPhotoStore::photo)
                .list();
    }

    @Override
    public Optional<byte[]> picture(PhotoId id) {
        return bytes("picture", id);
    }

    @Override
    public Optional<byte[]> thumbnail(PhotoId id) {
        return bytes("thumbnail", id);
    }

    @Override
    public void setCaption(PhotoId id, @Nullable String caption) {
        database.sql("update photo set caption = ? where id = ?")
                .params(caption, id.value())
                .update();
    }

    @Override
    public void setDeleted(PhotoId id, boolean deleted) {
        OffsetDateTime at = deleted ? clock.instant().atOffset(ZoneOffset.UTC) : null;
        database.sql("update photo set deleted_at = ? where id = ?")
                .params(at, id.value())
                .update();
    }

    private Optional<byte[]> bytes(String column, PhotoId id) {
        return database.sql("select " + column + " from photo where id = ? and deleted_at is null")
                .param(id.value())
                .query((row, number) -> row.getBytes(1))
                .optional();
    }

    private static Photo photo(ResultSet row, int number) throws SQLException {
        return new Photo(
                new PhotoId(row.getObject("id", UUID.class)),
                new CandidateId(row.getObject("candidate_id", UUID.class)),
                row.getString("check_id"),
                row.getString("caption"),
                row.getObject("added_at", OffsetDateTime.class).toInstant(),
                row.getInt("width"),
                row.getInt("height"),
                row.getString("media_type"),
                row.getInt("size_bytes"));
    }
}
