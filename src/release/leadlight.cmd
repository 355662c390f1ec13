@echo off
rem Starts Leadlight with the Java runtime that lies beside it. Never yet run on Windows: docs/release.md.
setlocal
set "HOME_DIR=%~dp0.."
rem The decoder's own log lines would stand beside our one line on a bad picture.
if not defined OPENCV_LOG_LEVEL set "OPENCV_LOG_LEVEL=OFF"
"%HOME_DIR%\runtime\bin\java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xmn32m -Xmx768m -Xlog:disable -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Dleadlight.opencv=%HOME_DIR%\app\native\@OPENCV@" "-Dorg.sqlite.lib.path=%HOME_DIR%\app\native" -Dorg.sqlite.lib.name=@SQLITE@ -jar "%HOME_DIR%\app\leadlight.jar" %*
exit /b %ERRORLEVEL%
