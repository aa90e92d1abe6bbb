namespace Practice.Service.Demo;

/// <summary>How to sign in to the demo practice.</summary>
/// <param name="Email">Address.</param>
/// <param name="Password">Password; known to everybody, since all there is invented.</param>
public sealed record DemoAccount(string Email, string Password)
{
    /// <summary>The demo practitioner.</summary>
    public static DemoAccount Default { get; } = new("demo@practice.example", "rice-and-honey");
}
