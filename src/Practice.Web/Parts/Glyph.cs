using System.Collections.Frozen;

namespace Practice.Web.Parts;

/// <summary>The small drawings of the screens; each stands beside words or has a label.</summary>
public enum Glyph
{
    Grain,
    Today,
    Clients,
    Foods,
    Practice,
    Search,
    Sun,
    Moon,
    Plus,
    Minus,
    Close,
    Check,
    Lock,
    Unlock,
    Swap,
    Bin,
    Undo,
    Redo,
    Scales,
    Warning,
    Stop,
    Info,
    Download,
    Forward,
    Saved,
    Saving,
    Offline,
    Flag,
    Pencil,
    Send,
    Leave,
    Calendar,
    Feedback,
}

/// <summary>The strokes of each drawing, on a grid of 24 by 24.</summary>
public static class Glyphs
{
    private static readonly FrozenDictionary<Glyph, string> Strokes = new Dictionary<Glyph, string>
    {
        [Glyph.Grain] =
            "M12 21.5V9M12 9c-2-1.7-2-4.8 0-6.5 2 1.7 2 4.8 0 6.5zM12 14.5c-3 .2-5-1.5-5.3-4.4 3-.2 5 1.5 5.3 4.4z"
            + "M12 14.5c3 .2 5-1.5 5.3-4.4-3-.2-5 1.5-5.3 4.4zM12 20c-3 .2-5-1.5-5.3-4.4 3-.2 5 1.5 5.3 4.4z"
            + "M12 20c3 .2 5-1.5 5.3-4.4-3-.2-5 1.5-5.3 4.4z",
        [Glyph.Today] = "M4.5 6h15v13.5h-15zM4.5 10.5h15M8.5 3.5V7M15.5 3.5V7M9 15l2 2 4-4",
        [Glyph.Clients] =
            "M9 11.5a3.3 3.3 0 1 0 0-6.6 3.3 3.3 0 0 0 0 6.6zM3 19.5c.4-3.3 2.7-5 6-5s5.6 1.7 6 5"
            + "M15.5 5.1a3.3 3.3 0 0 1 0 6.2M17.5 14.8c2.1.7 3.3 2.3 3.5 4.7",
        [Glyph.Foods] =
            "M3.5 11.5h17c0 4.7-3.4 8-8.5 8s-8.5-3.3-8.5-8zM8.5 8.5c-1-1.6 1-2.4 0-4M13.5 8.5c-1-1.6 1-2.4 0-4",
        [Glyph.Practice] = "M5.5 11v8.5h13V11M3.5 11 6 5h12l2.5 6zM10 19.5V15h4v4.5",
        [Glyph.Search] = "M10.5 17a6.5 6.5 0 1 0 0-13 6.5 6.5 0 0 0 0 13zM15.3 15.3 20.5 20.5",
        [Glyph.Sun] =
            "M12 16a4 4 0 1 0 0-8 4 4 0 0 0 0 8zM12 2.5v2M12 19.5v2M2.5 12h2M19.5 12h2M5.3 5.3l1.4 1.4"
            + "M17.3 17.3l1.4 1.4M5.3 18.7l1.4-1.4M17.3 6.7l1.4-1.4",
        [Glyph.Moon] = "M19.5 14.5A8 8 0 0 1 9.5 4.5a8 8 0 1 0 10 10z",
        [Glyph.Plus] = "M12 5v14M5 12h14",
        [Glyph.Minus] = "M5 12h14",
        [Glyph.Close] = "M6 6l12 12M18 6 6 18",
        [Glyph.Check] = "M5 12.5l4.5 4.5L19 7.5",
        [Glyph.Lock] = "M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 0 1 7 0v3",
        [Glyph.Unlock] = "M6 11h12v9H6zM8.5 11V7.5a3.5 3.5 0 0 1 6.8-1.2",
        [Glyph.Swap] = "M4 8.5h14l-3.5-3.5M20 15.5H6l3.5 3.5",
        [Glyph.Bin] = "M5 7h14M10 4h4M7 7l.8 13h8.4L17 7M10.3 10.5v6M13.7 10.5v6",
        [Glyph.Undo] = "M8.5 5 4.5 9l4 4M4.5 9H14a5 5 0 0 1 0 10H9",
        [Glyph.Redo] = "M15.5 5l4 4-4 4M19.5 9H10a5 5 0 0 0 0 10h5",
        [Glyph.Scales] =
            "M12 4v16M8 20h8M5 7.5c3.5 0 4.5-1.5 7-1.5s3.5 1.5 7 1.5M5 7.5 2.5 14a2.7 2.7 0 0 0 5 0zM19 7.5 16.5 14a2.7 2.7 0 0 0 5 0z",
        [Glyph.Warning] = "M12 4 2.8 19.5h18.4zM12 10v4.5M12 17v.2",
        [Glyph.Stop] = "M8.3 3.5h7.4l4.8 4.8v7.4l-4.8 4.8H8.3l-4.8-4.8V8.3zM12 8v5M12 16v.2",
        [Glyph.Info] = "M12 20.5a8.5 8.5 0 1 0 0-17 8.5 8.5 0 0 0 0 17zM12 11v5.5M12 7.5v.2",
        [Glyph.Download] = "M12 4v11.5M7 11l5 5 5-5M4.5 20h15",
        [Glyph.Forward] = "M9.5 5.5 16 12l-6.5 6.5",
        [Glyph.Saved] = "M12 20.5a8.5 8.5 0 1 0 0-17 8.5 8.5 0 0 0 0 17zM8 12.3l2.8 2.8L16 9.5",
        [Glyph.Saving] = "M20.5 12A8.5 8.5 0 1 1 12 3.5",
        [Glyph.Offline] =
            "M3.5 3.5l17 17M8.5 13a5.5 5.5 0 0 1 3-1.4M5.5 9.8a10 10 0 0 1 3.3-2.2M12.5 7a10 10 0 0 1 6 2.8M12 17.5v.2",
        [Glyph.Flag] = "M6 21V4M6 4.5c4-2.5 7 2.5 12 0v9c-5 2.5-8-2.5-12 0",
        [Glyph.Pencil] = "M4.5 19.5l1-4.5L16 4.5l3.5 3.5L9 18.5zM13.5 7l3.5 3.5",
        [Glyph.Send] = "M20.5 3.5 3.5 10.5l6.5 3 3 6.5zM10 13.5l4.5-4.5",
        [Glyph.Calendar] = "M4.5 6h15v13.5h-15zM4.5 10.5h15M8.5 3.5V7M15.5 3.5V7",
        [Glyph.Feedback] = "M4 5h16v11h-9.5L6 20v-4H4zM8 9h8M8 12h5",
        [Glyph.Leave] = "M14 4.5H5v15h9M10 12h10.5M17 8.5l3.5 3.5-3.5 3.5",
    }.ToFrozenDictionary();

    public static string PathOf(Glyph glyph) => Strokes[glyph];
}
