@echo off
rem Starts baysheet with the Java of this machine. The first run that makes sheets also writes a
rem class-data archive to the user's cache, which halves the start of later runs.
setlocal EnableExtensions DisableDelayedExpansion

set "home=%~dp0.."
set "jar=%home%\lib\baysheet.jar"
if not exist "%jar%" (
  >&2 echo baysheet: "%jar%" is missing; unpack the whole archive again
  exit /b 3
)

set "java="
if defined JAVA_HOME goto named
for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java (
  >&2 echo baysheet: there is no Java on this machine; install Java 17 or later, or set JAVA_HOME to the folder of one
  exit /b 3
)
goto found
:named
set "java=%JAVA_HOME:"=%\bin\java.exe"
if not exist "%java%" (
  >&2 echo baysheet: JAVA_HOME names no folder with bin\java.exe; install Java 17 or later, or set JAVA_HOME to the folder of one
  exit /b 3
)

:found
rem A Java names its version in a file, which is read sooner than it starts.
set "version="
for %%j in ("%java%") do set "release=%%~dpj..\release"
if exist "%release%" for /f "usebackq tokens=1,2 delims==" %%k in ("%release%") do (
  if "%%k"=="JAVA_VERSION" set "version=%%~l"
)
if not defined version for /f "tokens=3" %%v in ('call "%java%" -version 2^>^&1') do (
  if not defined version set "version=%%~v"
)
if not defined version (
  >&2 echo baysheet: "%java%" does not start; install Java 17 or later, or set JAVA_HOME to the folder of one
  exit /b 3
)
rem Java 8 calls itself 1.8.
for /f "tokens=1,2 delims=.-+_" %%a in ("%version%") do (
  set "major=%%a"
  if "%%a"=="1" set "major=%%b"
)
if %major% LSS 17 (
  >&2 echo baysheet: "%java%" is Java %major%, which is too old; install Java 17 or later, or set JAVA_HOME to the folder of one
  exit /b 3
)

rem The program writes UTF-8; the terminal's own code page comes back when it is done.
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul

set "options=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable -Dfile.encoding=UTF-8"

rem The archive fits one Java and one jar: both are in its name. Java itself also compares its own
rem build, and the jar's path, size and time, with what the archive holds.
set "archive="
set "build="
if exist "%jar%.sha256" set /p build=<"%jar%.sha256"
if defined LOCALAPPDATA if defined build set "archive=%LOCALAPPDATA%\baysheet\%build%-%version%.jsa"
set "use=-Xshare:auto"
set "size=0"
if defined archive if exist "%archive%" for %%f in ("%archive%") do set "size=%%~zf"
if not "%size%"=="0" set "use=-XX:SharedArchiveFile="%archive%""

"%java%" %use% %options% -jar "%jar%" %*
set "status=%ERRORLEVEL%"

rem An empty archive says that this machine could not make one, so that no later run tries again.
if not "%status%"=="0" goto done
if not "%~1"=="sheets" goto done
if not defined archive goto done
if exist "%archive%" goto done
set "cache=%LOCALAPPDATA%\baysheet"
set "new=%cache%\new.%RANDOM%"
mkdir "%new%" 2>nul || goto done
for %%f in ("%cache%\*.jsa") do (
  echo "%%~nf" | findstr /b /c:"\"%build%-" >nul || del /q "%%f" 2>nul
)
"%java%" "-XX:ArchiveClassesAtExit=%new%\jsa" %options% -jar "%jar%" sheets "%home%\jobs\2026-03-02\2402.yaml" -o "%new%\out" >nul 2>&1
if not exist "%new%\jsa" type nul >"%new%\jsa"
move /y "%new%\jsa" "%archive%" >nul 2>&1
rmdir /s /q "%new%" 2>nul

:done
if defined page chcp %page% >nul
exit /b %status%
