// What one inspection may hold: the same figures as the rooms have, held equal by a test.

export const LINE_BYTES = 64 * 1024;
export const ENTRIES = 20_000;
export const PHOTOS = 2_000;
export const JOURNAL_BYTES = 128 * 1024 * 1024;
export const ARCHIVE_FILES = 6_000;
export const ARCHIVE_FILE_BYTES = 512 * 1024 * 1024;
export const ARCHIVE_UNFOLDS = 50;
export const PHOTO_BYTES = 25 * 1024 * 1024;
export const SEQUENCE = 1_000_000;
export const ADOPT_AHEAD_MS = 5 * 60 * 1000;
export const JSON_DEPTH = 16;
