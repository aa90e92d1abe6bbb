using System.Collections.Immutable;

namespace Practice.Service.Demo;

/// <summary>The invented logo of the demo practice.</summary>
internal static class DemoLogo
{
    public static ImmutableArray<byte> Png { get; } = Read();

    private static ImmutableArray<byte> Read()
    {
        using var stream =
            typeof(DemoLogo).Assembly.GetManifestResourceStream(
                "Practice.Service.Demo.larkfield.png"
            ) ?? throw new InvalidOperationException("The demo logo is not embedded.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return [.. bytes.ToArray()];
    }
}
