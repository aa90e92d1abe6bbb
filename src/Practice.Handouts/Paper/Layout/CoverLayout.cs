using Practice.Domain.Practices;
using Practice.Handouts.Blocks;
using Practice.Handouts.Paper.Pdf;

namespace Practice.Handouts.Paper.Layout;

/// <summary>The band at the head of the first page: runs to the edges of the paper.</summary>
internal static class CoverLayout
{
    private const double TopPadding = 26;
    private const double LogoHeight = 40;
    private const double LogoWidth = 118;
    private const double LogoPadding = 6;

    public static Slab Lay(Cover cover, Setting setting)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var page = setting.Page;
        var right = type.Gentle(128);
        var width = page.BodyWidth - right - 12;
        var practice = new TextBox(
            canvas,
            setting.Practice.Name,
            width,
            new(Face.SemiBold, type.Gentle(9.5), 1.3)
        );
        var kicker = new TextBox(
            canvas,
            cover.Kicker,
            width,
            new(Face.SemiBold, type.Gentle(10.5), 1.35)
        );
        var title = OneLine(cover.Title, width, 1.18, setting, 28, 24, 20);
        var lines = new TextBox(
            canvas,
            string.Join('\n', cover.Lines),
            width,
            new(Face.Regular, type.Gentle(10.8), 1.42)
        );
        var kickerTop = TopPadding + Math.Max(practice.Height, LogoHeight) + 12;
        var titleTop = kickerTop + kicker.Height + 1;
        var linesTop = titleTop + title.Height + 5;
        var band = linesTop + lines.Height + 24;
        return new()
        {
            Height = band - PageFrame.BodyTop,
            Draw = (x, _) =>
            {
                canvas.Decoration(() =>
                {
                    canvas.Fill(new(0, 0, page.Width, band), theme.Accent);
                    EarOfGrain.Draw(
                        canvas,
                        page.Width - type.Gentle(128) - PageFrame.Margin,
                        band,
                        theme.AccentShade
                    );
                });
                canvas.Tagged(
                    new("P"),
                    () => practice.Draw(x, TopPadding, Inks.Only(theme.OnAccent))
                );
                canvas.Bookmark($"{cover.Kicker}: {cover.Title}", 1);
                canvas.Tagged(
                    new("H1"),
                    () =>
                    {
                        kicker.Draw(x, kickerTop, Inks.Only(theme.OnAccentSoft));
                        canvas.Text(
                            " ",
                            x + kicker.UsedWidth,
                            titleTop,
                            new(Face.Regular, 8),
                            theme.OnAccent
                        );
                        title.Draw(x, titleTop, Inks.Only(theme.OnAccent));
                    }
                );
                canvas.Tagged(new("P"), () => lines.Draw(x, linesTop, Inks.Only(theme.OnAccent)));
                DrawLogo(setting, page.Width - PageFrame.Margin);
                if (cover.Countdown is { } countdown)
                    DrawCountdown(countdown, setting, x + page.BodyWidth - right, right, band);
            },
        };
    }

    /// <summary>The largest of some sizes that takes one line; a long name is set small before it takes a second.</summary>
    private static TextBox OneLine(
        string text,
        double width,
        double leading,
        Setting setting,
        params ReadOnlySpan<double> sizes
    )
    {
        foreach (var size in sizes)
            if (Box(size) is { LineCount: 1 } box)
                return box;
        return Box(sizes[^1]);

        TextBox Box(double size) =>
            new(setting.Canvas, text, width, new(Face.Bold, setting.Type.Gentle(size), leading));
    }

    private static void DrawCountdown(
        Countdown countdown,
        Setting setting,
        double x,
        double width,
        double band
    )
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var largest = countdown.Figure.Length > 3 ? 26 : 46;
        var figure = OneLine(countdown.Figure, width, 1.02, setting, largest, 22, 18);
        var caption = new TextBox(
            canvas,
            countdown.Caption,
            width,
            new(Face.SemiBold, type.Gentle(8.6), 1.35)
        );
        var top = band - 24 - caption.Height - figure.Height;
        canvas.Tagged(
            new("P"),
            () =>
            {
                figure.Draw(x, top, Inks.Only(theme.OnAccent), Align.Right);
                canvas.Text(" ", x + width, top + 20, new(Face.Regular, 8), theme.OnAccent);
                caption.Draw(x, top + figure.Height, Inks.Only(theme.OnAccentSoft), Align.Right);
            }
        );
    }

    private static void DrawLogo(Setting setting, double right)
    {
        if (
            setting.Practice.LogoPng.AsMemory() is not { IsEmpty: false } png
            || Logo.AspectOf(png) is not { } aspect
        )
            return;
        var (room, tall) = (LogoWidth - 2 * LogoPadding, LogoHeight - 2 * LogoPadding);
        var width = Math.Min(room, tall * aspect);
        var height = width / aspect;
        var card = new Rect(
            right - width - 2 * LogoPadding,
            TopPadding,
            width + 2 * LogoPadding,
            LogoHeight
        );
        var canvas = setting.Canvas;
        canvas.Figure(
            $"Logo of {setting.Practice.Name}",
            card,
            () =>
            {
                canvas.Fill(card, Colour.White, 5);
                canvas.Image(
                    png,
                    new(card.X + LogoPadding, card.Y + (LogoHeight - height) / 2, width, height)
                );
            }
        );
    }
}
