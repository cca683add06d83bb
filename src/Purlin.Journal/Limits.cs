namespace Purlin.Journal;

/// <summary>What one inspection may hold. Checked on the phone and at the office; at 80 % the person is told.</summary>
public static class Limits
{
    /// <summary>Bytes of one journal line, without its line end.</summary>
    public const int LineBytes = 64 * 1024;

    /// <summary>Entries of an inspection.</summary>
    public const int Entries = 20_000;

    /// <summary>Entries that the office itself may write beyond them: a full inspection can still be sealed.</summary>
    public const int OfficeEntries = 200;

    /// <summary>Lines of one inspection that are kept although they failed a check. What comes beyond them is not kept.</summary>
    public const int HeldLines = 2_000;

    /// <summary>Bytes of the lines kept although they failed a check.</summary>
    public const int HeldBytes = 16 * 1024 * 1024;

    /// <summary>Photographs of an inspection.</summary>
    public const int Photos = 2_000;

    /// <summary>Sounds of an inspection.</summary>
    public const int Sounds = 2_000;

    /// <summary>Bytes of one inspection's lines together, in an archive or in memory.</summary>
    public const int JournalBytes = 128 * 1024 * 1024;

    /// <summary>Files in one archive: photographs, sounds, editions and the rest.</summary>
    public const int ArchiveFiles = 6_000;

    /// <summary>Bytes of one file in an archive that is no photograph: a page or PDF of an edition.</summary>
    public const long ArchiveFileBytes = 512L * 1024 * 1024;

    /// <summary>How many times its own size an archive may unfold to. Photographs do not shrink; text does, about tenfold.</summary>
    public const int ArchiveUnfolds = 50;

    /// <summary>Bytes of one photograph.</summary>
    public const int PhotoBytes = 25 * 1024 * 1024;

    /// <summary>Pixels of one photograph, read from its header before any decoding.</summary>
    public const long PhotoPixels = 50_000_000;

    /// <summary>Devices that may write in one inspection.</summary>
    public const int Devices = 16;

    /// <summary>
    /// Branches of all devices together, each device one: a copied profile makes one more. Work on a journal grows with them.
    /// </summary>
    public const int Branches = 64;

    /// <summary>Names in one list of a line: what it replaces, what it rests on. Honest lines name a few.</summary>
    public const int NamesInList = 200;

    /// <summary>How deep places are put inside one another: property, house, storey, room, closet, and some to spare.</summary>
    public const int PlaceDepth = 32;

    /// <summary>Highest sequence a line may claim: a hostile one cannot make us list two thousand million missing names.</summary>
    public const int Sequence = 1_000_000;

    /// <summary>Devices one line may say it has seen, forks counted.</summary>
    public const int Heads = 64;

    /// <summary>How far ahead of its own clock a device lets a time pull it, in milliseconds: five minutes.</summary>
    public const long AdoptAheadMilliseconds = 5 * 60 * 1000;

    /// <summary>Depth of nesting in one line.</summary>
    public const int JsonDepth = 16;

    /// <summary>Characters of one note.</summary>
    public const int NoteCharacters = 20_000;

    /// <summary>Characters of one sentence in the inspector's own words.</summary>
    public const int SentenceCharacters = 4_000;

    /// <summary>Characters of one condition of the inspector's own, as JSON.</summary>
    public const int ConditionCharacters = 20_000;

    /// <summary>Share of a limit at which the person is told.</summary>
    public const double TellAt = 0.8;

    /// <summary>Whether so much is held that the person is to be told.</summary>
    public static bool IsNear(int held, int most) => held >= most * TellAt;
}
