using MudBlazor;
using Practice.Domain.Practices;
using Colour = Practice.Domain.Practices.Colour;

namespace Practice.Web.Shell;

/// <summary>
/// The look of a practice: its accent set into our two palettes. Style sheets read the palette as CSS variables, so
/// that pages without a circuit look the same; the component library gets the same colours as its theme.
/// </summary>
public sealed class PracticeTheme
{
    private static readonly string[] Fonts = ["Inter Variable", "Inter", "system-ui", "sans-serif"];

    private PracticeTheme(Colour accent)
    {
        var (light, dark) = (Tones.Light(accent), Tones.Dark(accent));
        CssVariables = string.Join(
            '\n',
            $":root {{ color-scheme: light; {Variables(light)} }}",
            "@media (prefers-color-scheme: dark) {",
            $"  :root:not([data-theme=light]) {{ color-scheme: dark; {Variables(dark)} }}",
            "}",
            $":root[data-theme=dark] {{ color-scheme: dark; {Variables(dark)} }}"
        );
        Mud = new MudTheme
        {
            PaletteLight = Filled(new PaletteLight(), light),
            PaletteDark = Filled(new PaletteDark(), dark),
            LayoutProperties = new LayoutProperties { DefaultBorderRadius = "10px" },
            Shadows = new Shadow { Elevation = [.. Enumerable.Repeat("none", 26)] },
            Typography = new Typography
            {
                Default = new DefaultTypography
                {
                    FontFamily = Fonts,
                    FontSize = "0.875rem",
                    LetterSpacing = "normal",
                },
                Button = new ButtonTypography { TextTransform = "none", FontWeight = "550" },
            },
        };
    }

    /// <summary>The look of a practice that has not set an accent.</summary>
    public static PracticeTheme Default { get; } = new(Tones.DefaultAccent);

    /// <summary>Both palettes as CSS: the reader's choice wins over the system's.</summary>
    public string CssVariables { get; }

    /// <summary>The component library's theme.</summary>
    public MudTheme Mud { get; }

    /// <summary>The look with an accent as the practice typed it; the default where it is no colour.</summary>
    public static PracticeTheme For(string? accent) =>
        Colour.TryParse(accent, out var colour) ? new PracticeTheme(colour) : Default;

    private static string Variables(Tones tones) =>
        string.Concat(tones.Named.Select(c => $"--{c.Name}: {c.Colour}; "));

    private static T Filled<T>(T mud, Tones ours)
        where T : Palette
    {
        var (ink, soft, line) = ($"{ours.Ink}", $"{ours.SoftInk}", $"{ours.Hairline}");
        mud.Primary = $"{ours.Accent}";
        mud.PrimaryContrastText = $"{ours.OnAccent}";
        mud.Secondary = mud.Tertiary = mud.Dark = ink;
        mud.SecondaryContrastText =
            mud.TertiaryContrastText =
            mud.DarkContrastText =
                $"{ours.Paper}";
        (mud.Success, mud.Warning) = ($"{ours.Good}", $"{ours.Watch}");
        (mud.Error, mud.Info) = ($"{ours.Stop}", $"{ours.Note}");
        mud.SuccessContrastText =
            mud.WarningContrastText =
            mud.ErrorContrastText =
            mud.InfoContrastText =
                $"{ours.Card}";
        mud.TextPrimary = ink;
        mud.TextSecondary = mud.ActionDefault = soft;
        (mud.Background, mud.BackgroundGray) = ($"{ours.Paper}", $"{ours.Well}");
        mud.Surface = $"{ours.Card}";
        mud.LinesDefault = mud.TableLines = mud.Divider = line;
        mud.LinesInputs = $"{ours.Edge}";
        return mud;
    }
}
