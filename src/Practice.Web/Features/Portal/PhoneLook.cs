using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Practice.Web.Shell;

namespace Practice.Web.Features.Portal;

/// <summary>
/// A practice's colours for the phone pages, inside the page so that nothing flashes and no second request is made. The
/// page's policy allows this one style sheet by its hash.
/// </summary>
/// <param name="Css">The sheet.</param>
/// <param name="Hash">Its hash as a policy names it.</param>
internal sealed record PhoneLook(string Css, string Hash)
{
    private static readonly ConcurrentDictionary<string, PhoneLook> Known = new();

    public static PhoneLook Of(string accent) => Known.GetOrAdd(accent, Make);

    private static PhoneLook Make(string accent)
    {
        var css = PracticeTheme.For(accent).CssVariables;
        return new PhoneLook(
            css,
            $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(css)))}'"
        );
    }
}
