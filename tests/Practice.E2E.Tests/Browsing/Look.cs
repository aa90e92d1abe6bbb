using Microsoft.Playwright;

namespace Practice.E2E.Tests.Browsing;

/// <summary>On what the application is looked at.</summary>
/// <param name="Width">Of the window, CSS pixels.</param>
/// <param name="Height">Of the window, CSS pixels.</param>
/// <param name="Scheme">Light or dark.</param>
/// <param name="IsTouch">Whether fingers point.</param>
public sealed record Look(int Width, int Height, ColorScheme Scheme, bool IsTouch)
{
    public static Look Desktop { get; } = new(1280, 900, ColorScheme.Light, IsTouch: false);

    public static Look DesktopInTheDark { get; } = Desktop with { Scheme = ColorScheme.Dark };

    public static Look Phone { get; } = new(390, 844, ColorScheme.Light, IsTouch: true);

    /// <summary>The narrowest phone that the client's pages are made for.</summary>
    public static Look SmallPhone { get; } = new(360, 740, ColorScheme.Light, IsTouch: true);

    /// <summary>Whether scripts run.</summary>
    public bool HasScript { get; init; } = true;
}
