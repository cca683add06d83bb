using Purlin.Hearing.Listening;

namespace Purlin.Tests.Hearing;

/// <summary>Files of dictation, and what is no such file. Forms: W3C WebVTT, 2019; SubRip as players read it, common practice.</summary>
public sealed class ReaderTests
{
    [Fact]
    public void WebVtt_gives_words_with_their_times()
    {
        var read = TranscriptReader.Read("WEBVTT\n\nNOTE a note\n\nintro\n00:01.000 --> 00:03.000 align:start\n<v Speaker>gutter is full\n\n00:00:09.000 --> 00:00:10.000\nokay\n").OrThrow();
        Assert.Equal(["gutter", "is", "full", "okay"], read.Words.Select(word => word.Text));
        Assert.Equal(1, read.Words[0].From);
        Assert.Equal(3, read.Words[2].To!.Value, 3);
        Assert.True(read.Words[3].Pause);
    }

    [Fact]
    public void SubRip_gives_words_with_their_times()
    {
        var read = TranscriptReader.Read("1\r\n00:00:01,500 --> 00:00:02,500\r\nno leak\r\n2\r\n00:00:02,500 --> 00:00:04,000\r\n16 inches\r\n").OrThrow();
        Assert.Equal(["no", "leak", "16", "inches"], read.Words.Select(word => word.Text));
        Assert.Equal(1.5, read.Words[0].From);
    }

    [Fact]
    public void Plain_text_may_have_clock_times()
    {
        var read = TranscriptReader.Read("[00:12] gutter is full\nand loose\n0:20 - siding is fine\n").OrThrow();
        Assert.Equal(8, read.Words.Length);
        Assert.Equal(12, read.Words[0].From);
        Assert.Equal(20, read.Words[5].From);
        Assert.All(TranscriptReader.Read("gutter is full\nand loose").OrThrow().Words, word => Assert.Null(word.From));
    }

    [Fact]
    public void Words_of_broken_times_are_kept()
    {
        var read = TranscriptReader.Read("WEBVTT\n\n00:99:01.000 --> x\nno leak\n\n00:00:09.000 --> 00:00:03.000\ngutter is full\n").OrThrow();
        Assert.Equal(2, read.BrokenTimes);
        Assert.Equal(5, read.Words.Length);
        Assert.All(read.Words, word => Assert.Null(word.From));
    }

    [Fact]
    public void A_hundred_thousand_cues_are_read()
    {
        var cues = string.Concat(Enumerable.Range(0, 100_000)
            .Select(at => $"{at / 3600:00}:{at / 60 % 60:00}:{at % 60:00}.000 --> {at / 3600:00}:{at / 60 % 60:00}:{at % 60:00}.900\nfull\n\n"));
        Assert.Equal(100_000, TranscriptReader.Read("WEBVTT\n\n" + cues).OrThrow().Words.Length);
    }

    [Fact]
    public void What_is_too_much_is_refused_in_words()
    {
        var long10 = "WEBVTT\n\n00:01.000 --> 00:03.000\n" + string.Concat(Enumerable.Repeat("gutter is full ", 700_000));
        Assert.Contains("cut the narration", TranscriptReader.Read(long10).Refusals[0].ToString(), StringComparison.Ordinal);
        Assert.Contains("another kind of file",
            TranscriptReader.Read("WEBVTT\n\n00:01.000 --> 00:03.000\n" + new string('x', 10_000_000)).Refusals[0].ToString(),
            StringComparison.Ordinal);
        Assert.Contains("no words", TranscriptReader.Read("WEBVTT\n\n00:01.000 --> 00:03.000\n\n").Refusals[0].ToString(),
            StringComparison.Ordinal);
    }
}
