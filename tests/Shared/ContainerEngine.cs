using Docker.DotNet;

namespace Practice.TestSupport;

/// <summary>Whether containers can be had here.</summary>
internal static class ContainerEngine
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    public static async Task<bool> AnswersAsync()
    {
        // a cheap look first
        if (
            Environment.GetEnvironmentVariable("DOCKER_HOST") is null
            && OperatingSystem.IsLinux()
            && !File.Exists("/var/run/docker.sock")
        )
            return false;
        try
        {
            using var client = new DockerClientBuilder().Build();
            using var patience = new CancellationTokenSource(Patience);
            await client.System.PingAsync(patience.Token);
            return true;
        }
#pragma warning disable CA1031 // whatever goes wrong: no engine that could be used
        catch
#pragma warning restore CA1031
        {
            return false;
        }
    }
}
